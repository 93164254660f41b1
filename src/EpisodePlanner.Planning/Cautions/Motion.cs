namespace EpisodePlanner.Planning;

/// <summary>Cautions about machines that move, first of all for the first time.</summary>
internal static class Motion
{
    public static readonly Caution FirstMotion = new(
        "Before the first motion",
        "Before anything moves, go through what can hurt whom, how badly and how easily, and change the design before "
        + "relying on a warning.",
        "ISO 12100:2010",
        SourceStanding.LookedUp,
        Deferral.Sentence);

    public static readonly Caution FirstTest = new(
        "First test",
        "First try with little speed and little force, nobody in the danger zone, a spotter who watches, and the stop "
        + "within reach.",
        "derived from ISO 12100:2010",
        SourceStanding.Derived,
        Deferral.Sentence);

    public static readonly Caution EmergencyStop = new(
        "Emergency stop",
        "Fit a red emergency stop that works at any time and stays stopped until somebody resets it. It comes on top "
        + "of guards and never instead of them.",
        "ISO 13850:2015",
        SourceStanding.LookedUp,
        Deferral.Sentence);

    public static readonly Caution WornOrRidden = new(
        "Worn and ridden machines",
        "A machine that is worn or ridden can throw, crush or carry off the person on it. List what it can do to that "
        + "person, keep each from happening, and ride only what passed its tests with nobody on it.",
        "ISO 13482:2014",
        SourceStanding.LookedUp,
        Deferral.Sentence);
}
