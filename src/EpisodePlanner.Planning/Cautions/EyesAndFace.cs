namespace EpisodePlanner.Planning;

/// <summary>Cautions about what flies, splashes and shines.</summary>
internal static class EyesAndFace
{
    private const string Topic = "Eyes and face";
    private const string Rule = "29 CFR 1910.133(a)";

    public static readonly Caution Chips = new(
        Topic,
        "Chips, sparks and broken edges fly further than the cut. Cover eyes and face, and give whoever watches or "
        + "films the same.",
        Rule,
        SourceStanding.LookedUp,
        Deferral.Sentence);

    public static readonly Caution Light = new(
        Topic,
        "Everybody in sight of the arc, flame or beam needs cover of the filter shade that fits it, whoever films "
        + "included.",
        Rule,
        SourceStanding.LookedUp,
        Deferral.Sentence);

    // That the rule also names molten metal, liquids and vapours is from memory.
    public static readonly Caution Splashes = new(
        Topic,
        "Molten metal, resin, solvent and paint splash. Cover eyes and face, and air the room.",
        Rule,
        SourceStanding.FromMemory,
        Deferral.Sentence);
}
