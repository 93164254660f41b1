using System.Globalization;
using NodaTime;
using NodaTime.Text;

namespace EpisodePlanner.Planning.Tests.Plans;

/// <summary>Writes a plan down as lines of text, to compare plans to the bit.</summary>
internal static class PlanLines
{
    /// <summary>Everything that was computed, a thing a line.</summary>
    public static IEnumerable<string> All(Plan plan) =>
    [
        Line("horizon", Of(plan.Horizon), plan.Rule, plan.Generated, plan.Weights),
        .. Dates(plan),
        .. plan.Stages.Select(s => Line(s.Index, s.Name, s.Minutes, s.Begun, s.RunsAlone, s.Network, Of(s.Cause))),
        .. plan.Episodes.SelectMany(e => e.Chain.Select(c => Line(e.Id, c.Stage, Of(c.Start), Of(c.Finish), Of(c.Cause)))),
        .. plan.Findings.Select(f => f.ToString()),
    ];

    /// <summary>What happens when, in an order of its own.</summary>
    public static IEnumerable<string> Dates(Plan plan) =>
    [
        .. plan.Stages.OrderBy(s => s.Key.ToString(), StringComparer.Ordinal)
            .Select(s => Line(s.Key, string.Join("; ", s.Parts.Select(p => Line(p.Kind, Of(p.Start), Of(p.End), Ids(p.Stations)))))),
        .. plan.Episodes.OrderBy(e => e.Id)
            .Select(e => Line(e.Id, e.Title, Of(e.Ready), Of(e.Publish), e.Slot?.Rule, e.Slot?.Opening, e.WorkMinutes, Ids(e.Milestones))),
        .. plan.Series.Append(plan.Channel).OrderBy(o => o.Series).Select(Of),
    ];

    private static string Of(Outlook o) => Line(
        o.Series, o.Name, o.State, o.Promise, o.PromiseAssumed, o.LastUpload, o.DaysSilent, o.DueBy, o.LastPlanned,
        string.Join("; ", o.Past), string.Join("; ", o.Forecast), string.Join("; ", o.Alarms));

    private static string Of(PlannedCause? cause) => cause is null
        ? ""
        : Line(cause.Kind, cause.Says, cause.Stage, cause.Station, string.Join("; ", cause.CoBlockers));

    private static string Of(Instant? moment) => moment is { } at ? InstantPattern.ExtendedIso.Format(at) : "";

    private static string Ids(ValueList<Id> ids) => string.Join(" ", ids);

    private static string Line(params object?[] parts) =>
        string.Join(" | ", parts.Select(p => Convert.ToString(p, CultureInfo.InvariantCulture)));
}
