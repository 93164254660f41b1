using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Telling;

namespace EpisodePlanner.Web.Features.Supposes;

/// <summary>A draft beside the plan.</summary>
/// <param name="Draft">The draft.</param>
/// <param name="Says">Its changes in words.</param>
/// <param name="Difference">What differs; null where its changes no longer fit.</param>
/// <param name="Reasons">Why they no longer fit.</param>
/// <param name="ChangedSince">What it touches and somebody changed since it was supposed, in words.</param>
public sealed record SupposedPlan(
    Suppose Draft, string Says, PlanDifference? Difference, ValueList<Reason> Reasons, ValueList<string> ChangedSince)
{
    /// <summary>Whether it can be kept as it is.</summary>
    public bool MayBeKept => Difference is not null && ChangedSince.Count == 0;
}

/// <summary>Drafts in columns beside the plan: only what differs in one of them.</summary>
public sealed class SupposedColumns
{
    /// <summary>Said of a draft in which something is as it is in the plan.</summary>
    public const string TheSame = "the same";

    private const int MostStarts = 12;
    private readonly ValueList<Dictionary<(DifferenceGroup, string), DifferenceRow>> byKey;
    private readonly List<DifferenceRow> rows;

    /// <summary>Columns.</summary>
    /// <param name="drafts">The drafts that still fit.</param>
    public SupposedColumns(ValueList<SupposedPlan> drafts)
    {
        Drafts = drafts;
        var all = drafts.Select(draft => new DifferenceRows(draft.Difference!).All()).ToList();
        byKey = all.Select(rows => rows.GroupBy(row => (row.Group, row.Key)).ToDictionary(group => group.Key, group => group.First())).ToValueList();
        rows = [.. all.SelectMany(rows => rows).DistinctBy(row => (row.Group, row.Key))];
    }

    /// <summary>The drafts, a column each.</summary>
    public ValueList<SupposedPlan> Drafts { get; }

    /// <summary>The groups that have rows, in order.</summary>
    public IEnumerable<DifferenceGroup> Groups => rows.Select(row => row.Group).Distinct().Order();

    /// <summary>The rows of a group: what it is, what the plan says, what each draft says.</summary>
    public IEnumerable<(string What, string Plan, IEnumerable<string> Then)> Rows(DifferenceGroup group) => rows
        .Where(row => row.Group == group)
        .Take(group == DifferenceGroup.NextSevenDays ? MostStarts : int.MaxValue)
        .Select(row => (row.What, row.Before, byKey.Select(draft => Then(draft.GetValueOrDefault((row.Group, row.Key))))));

    /// <summary>How many rows of a group are left out.</summary>
    public int More(DifferenceGroup group) =>
        group == DifferenceGroup.NextSevenDays ? Math.Max(0, rows.Count(row => row.Group == group) - MostStarts) : 0;

    private static string Then(DifferenceRow? row) => row is null ? TheSame : row.By.Length == 0 ? row.Then : $"{row.Then}, {row.By}";
}
