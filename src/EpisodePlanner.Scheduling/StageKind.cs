namespace EpisodePlanner.Scheduling;

/// <summary>What a stage is.</summary>
public enum StageKind
{
    /// <summary>Hands on: needs its people, machines and places together, and may pause when one of them closes.</summary>
    Attended,

    /// <summary>A machine running without interruption, between a load and an unload.</summary>
    Run,

    /// <summary>Time passing: a cure, a delivery, an approval.</summary>
    Wait,
}
