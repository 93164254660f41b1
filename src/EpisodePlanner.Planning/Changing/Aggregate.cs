namespace EpisodePlanner.Planning;

/// <summary>
/// What is stored, versioned and edited as one: a thing with all its parts, or one of the singles of a workshop.
/// </summary>
/// <param name="Kind">The name of its kind, see <see cref="ThingKind.Name"/>; a single is of a kind of its own.</param>
/// <param name="Id">The thing's id; a single has its kind's name.</param>
public readonly record struct Aggregate(string Kind, Id Id)
{
    /// <summary>The workshop's name and zone.</summary>
    public static Aggregate About { get; } = Single("about");

    /// <summary>The settings.</summary>
    public static Aggregate Settings { get; } = Single("settings");

    /// <summary>The plan the maker accepted.</summary>
    public static Aggregate Accepted { get; } = Single("accepted");

    /// <summary>Kind and id: "tasks/weld-frame".</summary>
    public override string ToString() => $"{Kind}/{Id}";

    private static Aggregate Single(string name) => new(name, new Id(name));
}
