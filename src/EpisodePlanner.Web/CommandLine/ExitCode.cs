namespace EpisodePlanner.Web.CommandLine;

/// <summary>What a command hands back to the shell.</summary>
public static class ExitCode
{
    /// <summary>It did what was asked.</summary>
    public const int Done = 0;

    /// <summary>The planner itself failed.</summary>
    public const int Failed = 1;

    /// <summary>What was typed, what the file says, or what it is to work with is wrong; the error output says what.</summary>
    public const int BadInput = 2;

    /// <summary>It was stopped from the keyboard.</summary>
    public const int Stopped = 130;
}
