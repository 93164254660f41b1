using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>What is taken for granted where nothing was typed; every use is told as an <see cref="Assumption"/>.</summary>
public static class Defaults
{
    /// <summary>Longest silence of a series, days: past about a month a series is taken for abandoned (common practice).</summary>
    public const int SeriesPromiseDays = 21;

    /// <summary>Longest silence of the channel, days.</summary>
    public const int ChannelPromiseDays = 21;

    /// <summary>An episode's tail, hours.</summary>
    public const decimal TailHours = 16;

    /// <summary>The shortest stretch worth beginning, minutes.</summary>
    public const int MinimumBlockMinutes = 30;

    /// <summary>A load or unload of at most this many minutes takes nobody's time.</summary>
    public const int TouchMinutes = 10;

    /// <summary>Minutes that a piece of work still takes at least while nobody has called it done, as a share of its estimate.</summary>
    public const decimal LeastRemaining = 0.1m;

    /// <summary>Minutes on screen of a milestone that names none.</summary>
    public const decimal ScreenMinutes = 4;

    /// <summary>The tail of an episode where neither it nor the settings name one.</summary>
    public static ValueList<TailPart> Tail { get; } = [new TailPart { Kind = TailKind.Everything, Hours = TailHours }];

    /// <summary>The hands where nobody is named.</summary>
    public static Person Maker { get; } = new() { Id = new Id("you"), Name = "you" };

    /// <summary>When hands are free where nobody said: weekday evenings.</summary>
    public static OpenHours Evenings { get; } = new()
    {
        Weekly =
        [
            new WeeklyHours
            {
                Days = [IsoDayOfWeek.Monday, IsoDayOfWeek.Tuesday, IsoDayOfWeek.Wednesday, IsoDayOfWeek.Thursday, IsoDayOfWeek.Friday],
                From = new LocalTime(19, 0),
                To = new LocalTime(22, 0),
            },
        ],
    };

    /// <summary>When the channel publishes where nobody said: Fridays at 18:00.</summary>
    public static SlotRule Fridays { get; } = new()
    {
        Id = new Id("fridays"),
        From = new LocalDate(2000, 1, 7),
        At = new LocalTime(18, 0),
        Rule = "FREQ=WEEKLY;BYDAY=FR",
    };
}
