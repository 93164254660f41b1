namespace EpisodePlanner.Planning;

/// <summary>Cautions about machines with nobody there.</summary>
internal static class LeftAlone
{
    private const string NoStandard = "no public standard found; common practice";

    public static readonly Caution Unattended = new(
        "Running with nobody there",
        "No public standard covers this. Keep to the machine maker's instructions, with a working smoke alarm and "
        + "nothing that burns near the machine; where the instructions ask for somebody present, stay.",
        NoStandard,
        SourceStanding.CommonPractice,
        Deferral.Sentence);

    public static readonly Caution Never = new(
        "Never alone",
        "This kind of machine never runs with nobody there. Somebody stays within reach of its stop until it rests.",
        NoStandard,
        SourceStanding.CommonPractice,
        Deferral.Sentence);
}
