namespace EpisodePlanner.Planning;

/// <summary>What must hold in every workshop, whichever way it came to be.</summary>
public static class WorkshopRules
{
    /// <summary>Every rule that the workshop breaks, in the order of the file; empty where it is sound.</summary>
    public static ValueList<Reason> Check(Workshop workshop) => [];
}
