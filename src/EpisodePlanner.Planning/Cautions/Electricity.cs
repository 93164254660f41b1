namespace EpisodePlanner.Planning;

/// <summary>Cautions about batteries and the mains.</summary>
internal static class Electricity
{
    public static readonly Caution Lithium = new(
        "Lithium packs",
        "Stop using a pack that smells, heats up, swells or makes a noise. Charge and keep it between 0 and 40 °C, "
        + "away from the way out and from anything that burns.",
        "USFA/FEMA and NFPA guidance on lithium-ion batteries",
        SourceStanding.LookedUp,
        Deferral.Sentence);

    // The code's number is from memory.
    public static readonly Caution Mains = new(
        "Mains wiring",
        "Mains voltage can kill at the first touch. Switch off, lock off and prove it dead before hands go in; leave "
        + "fixed wiring to a licensed electrician.",
        "NFPA 70 or the local wiring code",
        SourceStanding.FromMemory,
        Deferral.Sentence);
}
