using static EpisodePlanner.Planning.Tests.Sample;

namespace EpisodePlanner.Planning.Tests;

/// <summary>The sample's series and episodes.</summary>
internal static class SampleStory
{
    public static Keyed<Series> Series { get; } =
    [
        new Series
        {
            Id = Id("buggy"),
            Name = "Buggy",
            Promise = new Promise { LongestSilenceDays = 28 },
            ScreenMinutes = new ScreenBounds { Least = 10, Most = 25 },
            Milestones =
            [
                new Milestone
                {
                    Id = Id("frame"),
                    Name = "Frame stands",
                    ScreenMinutes = new ThreePoint { Low = 6, Likely = 8, High = 12 },
                },
                new Milestone { Id = Id("rolling"), Name = "It rolls" },
                new Milestone { Id = Id("rides"), Name = "It rides" },
            ],
        },
        new Series
        {
            Id = Id("clock"),
            Name = "Clock",
            State = SeriesState.Resting,
            RestingUntil = Day(9, 1),
            Milestones = [new Milestone { Id = Id("gears"), Name = "Gears turn" }],
        },
    ];

    public static Keyed<Episode> Episodes { get; } =
    [
        new Episode { Id = Id("ep-1"), Title = "The frame", Series = Id("buggy"), Milestones = [Id("frame")] },
        new Episode
        {
            Id = Id("ep-2"),
            Title = "Rolling",
            Series = Id("buggy"),
            Milestones = [Id("rolling"), Id("rides")],
        },
    ];
}
