namespace EpisodePlanner.Checking;

/// <summary>What is imagined away for a stage that is asked to start earlier.</summary>
internal sealed record Relaxation
{
    public static Relaxation None { get; } = new();

    /// <summary>Links that are not looked at.</summary>
    public IReadOnlySet<int> Links { get; init; } = new HashSet<int>();

    /// <summary>Links whose greatest lag is not looked at.</summary>
    public IReadOnlySet<int> GreatestLags { get; init; } = new HashSet<int>();

    /// <summary>Stations that a stage is imagined not to take.</summary>
    public IReadOnlySet<(int Stage, int Station)> Held { get; init; } = new HashSet<(int, int)>();

    /// <summary>Stations that are open at all times.</summary>
    public IReadOnlySet<int> Stations { get; init; } = new HashSet<int>();

    /// <summary>Limits that are open at all times.</summary>
    public IReadOnlySet<int> Limits { get; init; } = new HashSet<int>();

    /// <summary>Somebody is always present.</summary>
    public bool Presence { get; init; }

    /// <summary>A minute is worth beginning for.</summary>
    public bool MinimumBlock { get; init; }

    /// <summary>Setting up and tidying take no time around the stage, its neighbours' neither.</summary>
    public bool SettingUp { get; init; }

    /// <summary>No date before which it may not start.</summary>
    public bool Date { get; init; }
}
