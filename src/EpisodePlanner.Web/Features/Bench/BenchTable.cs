using System.Globalization;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Pictures;
using NodaTime;

namespace EpisodePlanner.Web.Features.Bench;

/// <summary>A day of the bench in words.</summary>
/// <param name="Day">The day, from its noon on.</param>
/// <param name="Hands">What hands do, by time.</param>
/// <param name="Machines">What machines do and what waits, by time.</param>
public sealed record BenchTable(LocalDate Day, ValueList<BenchLine> Hands, ValueList<BenchLine> Machines)
{
    /// <summary>The days of a view on which something happens.</summary>
    public static ValueList<BenchTable> Of(Plan plan, BenchView view) => BenchRows.Of(plan, view)
        .Where(row => row.Hands.Count + row.Machines.Count > 0)
        .Select(row => new BenchTable(row.Day, Lines(row.Hands), Lines(row.Machines)))
        .ToValueList();

    private static ValueList<BenchLine> Lines(ValueList<Lane> lanes) => lanes
        .SelectMany(lane => lane.Bars, (lane, bar) => (lane, bar))
        .OrderBy(line => line.bar.From)
        .ThenBy(line => line.lane.Name, StringComparer.Ordinal)
        .Select(line => Line(line.lane, line.bar))
        .ToValueList();

    private static BenchLine Line(Lane lane, Bar bar) => new(
        bar.Stage.Key,
        $"{Clock(bar.From)}\u2013{Clock(bar.To)}",
        bar.Stage.Name,
        bar.Kind switch
        {
            BarKind.Hands => $", {lane.Name}",
            BarKind.Run => $" runs on {lane.Name}",
            BarKind.Held => $" is to be unloaded from {lane.Name}",
            _ => " waits",
        });

    private static string Clock(int minutes) =>
        string.Create(CultureInfo.InvariantCulture, $"{((minutes / 60) + 12) % 24:00}:{minutes % 60:00}");
}

/// <summary>A bar of the bench in words.</summary>
/// <param name="Key">The stretch of work.</param>
/// <param name="When">From when until when: "19:10–22:00".</param>
/// <param name="Name">The stretch of work in words.</param>
/// <param name="Who">Who or what does it.</param>
public sealed record BenchLine(StageKey Key, string When, string Name, string Who);
