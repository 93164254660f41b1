namespace EpisodePlanner.Planning;

/// <summary>Cautions about energy that is still there when the switch is off.</summary>
internal static class StoredEnergyCautions
{
    private const string Topic = "Stored energy";
    private const string Rule = "29 CFR 1910.147(d)(5)";

    public static readonly Caution Springs = new(
        Topic,
        "Springs, raised parts, flywheels and pressure keep their energy after the switch is off. Release it or hold "
        + "it fast, prove that it is gone before hands go in, and check again where it can build up.",
        Rule,
        SourceStanding.LookedUp,
        Deferral.Sentence);

    // That the rule counts heat among the energies is from memory.
    public static readonly Caution Heat = new(
        Topic,
        "An oven stays hot long after it is off. Let it cool or keep hands out, and check before reaching in.",
        Rule,
        SourceStanding.FromMemory,
        Deferral.Sentence);

    // The section number of the air rule is from memory.
    public static readonly Caution Air = new(
        "Compressed air",
        "Never point compressed air at a body. Clean with it only where the pressure is brought down and chips are "
        + "held back.",
        "29 CFR 1910.242(b)",
        SourceStanding.FromMemory,
        Deferral.Sentence);
}
