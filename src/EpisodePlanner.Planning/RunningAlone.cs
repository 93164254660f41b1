namespace EpisodePlanner.Planning;

/// <summary>Which kinds of machine may ever be allowed to run with nobody there.</summary>
public static class RunningAlone
{
    /// <summary>
    /// Whether a machine of this kind can be given the permission. An allow-list: a kind that is not on it, and a
    /// machine whose kind is unknown, never runs alone.
    /// </summary>
    public static bool CanBeAllowed(MachineKind kind) => kind is MachineKind.Printer;
}
