namespace EpisodePlanner.Planning;

/// <summary>Cautions about printing parts.</summary>
internal static class Printing
{
    // The title and the number are from memory.
    public static readonly Caution Emissions = new(
        "Print fumes",
        "A printer gives off fine particles and fumes. Enclose it or vent it outdoors, air the room, and don't sit "
        + "beside it.",
        "NIOSH, Approaches to Safe 3D Printing; ANSI/CAN/UL 2904",
        SourceStanding.FromMemory,
        Deferral.Sentence);
}
