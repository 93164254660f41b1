using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Transfer;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.Features.BringIn;

/// <summary>What the page shows of a workshop file before it is taken in.</summary>
public sealed record BringInModel
{
    /// <summary>Everything that is wrong with it, each with its place; it can't be taken in where there is something.</summary>
    public ValueList<string> Problems { get; init; } = [];

    /// <summary>The workshop's name.</summary>
    public string Name { get; init; } = "";

    /// <summary>What it holds, in words: "12 tasks".</summary>
    public ValueList<string> Holds { get; init; } = [];

    /// <summary>Its next upload by plan, in words.</summary>
    public string NextUpload { get; init; } = "";

    /// <summary>What its plan can't keep, in words.</summary>
    public ValueList<string> Findings { get; init; } = [];

    /// <summary>The file, to be sent again when it is taken in.</summary>
    public string Text { get; init; } = "";

    /// <summary>Makes a second sending of the same page the same import.</summary>
    public string Key { get; init; } = "";

    /// <summary>A file that was refused.</summary>
    internal static BringInModel Refused(ValueList<Reason> reasons) => new()
    {
        Problems = reasons.Select(reason => reason.Where == "$" ? reason.Says : $"{reason.Where}: {reason.Says}").ToValueList(),
    };

    /// <summary>A file that can be taken in.</summary>
    internal static BringInModel Of(ImportPreview preview, Workshop workshop, string text, string key) => new()
    {
        Name = preview.Name,
        Holds = ThingKinds.All
            .Select(kind => (kind.Name, Count: kind.All(workshop).Count))
            .Where(held => held.Count > 0)
            .Select(held => $"{SetNames.Of(held.Name)}: {held.Count}")
            .ToValueList(),
        NextUpload = preview.NextUploadAfter is { } next
            ? $"{Moment(next.Publish, workshop)}: {PlanNames.Quote(next.Title)}"
            : "none has a date yet",
        Findings = preview.Findings.Select(finding => finding.Says).ToValueList(),
        Text = text,
        Key = key,
    };

    private static string Moment(Instant moment, Workshop workshop)
    {
        var local = moment.InZone(DateTimeZoneProviders.Tzdb[workshop.Zone]);
        return $"{Words.Day(local.Date)}, {Words.Time(local.TimeOfDay)}";
    }
}

/// <summary>The sets of a workshop file in words.</summary>
internal static class SetNames
{
    /// <summary>"slotRules" is "Slot rules".</summary>
    public static string Of(string set)
    {
        var words = string.Concat(set.Select(c => char.IsUpper(c) ? $" {char.ToLowerInvariant(c)}" : $"{c}"));
        return SilenceWords.Capital(words);
    }
}
