namespace EpisodePlanner.Planning;

/// <summary>Cautions about hot work and wheels that throw sparks.</summary>
internal static class HeatAndSparks
{
    // Both section numbers are from memory.
    public static readonly Caution FireWatch = new(
        "Fire watch",
        "Sparks and hot metal light fires that show late. Clear away what burns, keep an extinguisher at hand, and let "
        + "somebody watch for fire during the work and for a good while after it.",
        "29 CFR 1910.252",
        SourceStanding.FromMemory,
        Deferral.Sentence);

    public static readonly Caution Guards = new(
        "Grinder guards",
        "Leave guard and rest of a grinding wheel in place, and use only a wheel that is sound and rated for the speed.",
        "29 CFR 1910.215",
        SourceStanding.FromMemory,
        Deferral.Sentence);
}
