using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Rows;

/// <summary>What a workshop says of itself, as the body of a row.</summary>
internal sealed record AboutBody
{
    [Range(1, Planning.Workshop.CurrentFormat)]
    public required int Format { get; init; }

    [StringLength(200, MinimumLength = 1)]
    public required string Name { get; init; }

    [StringLength(100, MinimumLength = 1)]
    public required string Zone { get; init; }

    public DemoMark? Demo { get; init; }

    public static AboutBody Of(Workshop workshop) => new()
    {
        Format = workshop.Format,
        Name = workshop.Name,
        Zone = workshop.Zone,
        Demo = workshop.Demo,
    };

    public Workshop Begin() => new() { Format = Format, Name = Name, Zone = Zone, Demo = Demo };
}
