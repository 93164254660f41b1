using System.Globalization;
using EpisodePlanner.Planning;
using NodaTime;

namespace EpisodePlanner.Web.Telling;

/// <summary>What a row of two plans beside each other is about.</summary>
public enum DifferenceGroup
{
    /// <summary>The days of uploads.</summary>
    Uploads,

    /// <summary>Silences beyond promises.</summary>
    Silences,

    /// <summary>Hours, and when all is done.</summary>
    Work,

    /// <summary>What starts in the next seven days.</summary>
    NextSevenDays,
}

/// <summary>Something that differs between two plans.</summary>
/// <param name="Group">What it is about.</param>
/// <param name="Key">What tells it from others of its group, whatever it is called.</param>
/// <param name="What">It in words.</param>
/// <param name="Before">What the first plan says of it.</param>
/// <param name="Then">What the second plan says of it.</param>
/// <param name="By">By how much, in words; empty where that is no question.</param>
public sealed record DifferenceRow(DifferenceGroup Group, string Key, string What, string Before, string Then, string By);

/// <summary>Two plans beside each other, in words: only what differs.</summary>
internal sealed class DifferenceRows(PlanDifference difference)
{
    private const string NotPlanned = "not planned";
    private const string NoDate = "no date";
    private readonly PlanNames names = new(difference.Before);

    /// <summary>What a group is called.</summary>
    public static string Heading(DifferenceGroup group) => group switch
    {
        DifferenceGroup.Uploads => "Uploads",
        DifferenceGroup.Silences => "Silences",
        DifferenceGroup.Work => "Work",
        _ => "In the next seven days",
    };

    /// <summary>Every row, group after group.</summary>
    public IReadOnlyList<DifferenceRow> All() => [.. Uploads(), .. Silences(), .. Work(), .. Starts()];

    private IEnumerable<DifferenceRow> Uploads()
    {
        var (before, then) = (difference.Before, difference.Then);
        var order = before.Episodes.Concat(difference.Added).Select((episode, at) => (episode.Id, at)).ToDictionary(x => x.Id, x => x.at);
        var moved = difference.Moved.Select(move => Row(move.Episode, move.Title, move.Series, Said(move.From), Said(move.To), Later(move.Days)));
        var added = difference.Added.Select(episode => Row(episode.Id, episode.Title, episode.Series, NotPlanned, Said(episode.Date), ""));
        var gone = difference.Gone.Select(episode => Row(episode.Id, episode.Title, episode.Series, Said(episode.Date), NotPlanned, ""));
        return moved.Concat(added).Concat(gone).OrderBy(row => order[new Id(row.Key)]);

        DifferenceRow Row(Id id, string title, Id series, string from, string to, string by) =>
            new(DifferenceGroup.Uploads, $"{id}", Title(title, then.Request.Workshop.Series.Find(series) ?? before.Request.Workshop.Series.Find(series)), from, to, by);
    }

    private IEnumerable<DifferenceRow> Silences() => difference.Outlooks
        .Select(change => new DifferenceRow(
            DifferenceGroup.Silences,
            change.Before.Series.IsEmpty ? "" : $"{change.Before.Series}",
            SilenceWords.Capital(change.Before.Name),
            Said(change.Before),
            Said(change.Then),
            Less(change.WorstOver)))
        .Concat(difference.Before.Series
            .Where(outlook => difference.Then.Series.All(one => one.Series != outlook.Series))
            .Select(outlook => new DifferenceRow(DifferenceGroup.Silences, $"{outlook.Series}", SilenceWords.Capital(outlook.Name), Said(outlook), "finished", "")))
        .Where(row => row.Before != row.Then);

    private IEnumerable<DifferenceRow> Work()
    {
        if (difference.HoursMore != 0)
        {
            yield return new DifferenceRow(
                DifferenceGroup.Work,
                "hours",
                "Hands-on work",
                "as much as planned",
                $"{Words.Work((int)Math.Round(Math.Abs(difference.HoursMore) * 60))} {(difference.HoursMore > 0 ? "more" : "less")}",
                "");
        }

        if (difference.WorkEnds is var (before, then) && before != then)
        {
            var days = before is { } from && then is { } to ? Period.DaysBetween(names.DateOf(from), names.DateOf(to)) : (int?)null;
            yield return new DifferenceRow(DifferenceGroup.Work, "end", "All work done", Said(before), Said(then), Later(days));
        }

        foreach (var finding in difference.NewlyImpossible)
        {
            yield return new DifferenceRow(DifferenceGroup.Work, finding.Where, "Can't be done then", "", finding.Says, "");
        }
    }

    private IEnumerable<DifferenceRow> Starts() => difference.Starts.Select(change => new DifferenceRow(
        DifferenceGroup.NextSevenDays,
        $"{change.Stage.Key}",
        PlanNames.Quote(change.Stage.Name),
        Said(change.From),
        Said(change.To),
        ""));

    private string Said(LocalDate? day) => day is { } known ? names.ShortDay(known) : NoDate;

    private string Said(Instant? moment) => moment is { } known ? names.Moment(known) : NotPlanned;

    private static string Title(string title, Series? series) => series is null ? title : $"{PlanNames.Quote(title)} ({series.Name})";

    private static string Said(Outlook outlook) => outlook switch
    {
        { State: SeriesState.Resting } => "rests openly",
        { Alarms.Count: 0 } => "its promise holds",
        { Alarms.Count: 1 } => $"{Words.Days(outlook.WorstOver)} beyond its promise",
        _ => string.Create(CultureInfo.InvariantCulture, $"beyond its promise {outlook.Alarms.Count} times, at most {Words.Days(outlook.WorstOver)}"),
    };

    private static string Later(int? days) => days switch
    {
        null or 0 => "",
        > 0 => $"{Words.Days(days.Value)} later",
        _ => $"{Words.Days(-days.Value)} earlier",
    };

    private static string Less((int Before, int Then) over) => (over.Then - over.Before) switch
    {
        0 => "",
        > 0 and var more => $"{Words.Days(more)} more",
        var less => $"{Words.Days(-less)} less",
    };
}
