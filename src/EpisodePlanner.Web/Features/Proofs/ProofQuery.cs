using System.ComponentModel.DataAnnotations;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Proofs;

/// <summary>What is to be proved.</summary>
internal sealed record ProofQuery
{
    /// <summary>How many seconds of work a proof gets where nobody says.</summary>
    public const int UsualSeconds = 5;

    /// <summary>The episode to come.</summary>
    public required Id Episode { get; init; }

    /// <summary>About so many seconds of work, and at most twice as many on the clock; 5 where absent.</summary>
    [Range(1, 10)]
    public int Seconds { get; init; } = UsualSeconds;
}
