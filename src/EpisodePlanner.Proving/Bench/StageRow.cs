using EpisodePlanner.Scheduling;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Bench;

/// <summary>What the model knows of one stage.</summary>
/// <param name="Index">Its index in the problem.</param>
/// <param name="About">The stage.</param>
/// <param name="Start">When it starts.</param>
/// <param name="Finish">When it is finished.</param>
/// <param name="Modes">By mode: whether it is done so; exactly one is.</param>
/// <param name="Latest">The last minute at which it is finished.</param>
/// <param name="IsFirm">Whether the targets wait for its finish, so that all of its work counts.</param>
internal sealed record StageRow(
    int Index, BenchStage About, IntVar Start, IntVar Finish, IReadOnlyList<BoolVar> Modes, int Latest, bool IsFirm);
