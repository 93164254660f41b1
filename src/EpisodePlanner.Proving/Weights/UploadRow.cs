using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Weights;

/// <summary>When an episode goes out, in the model.</summary>
/// <param name="Minute">Not later than its public minute.</param>
/// <param name="Day">Its public day.</param>
/// <param name="Position">The position of its window.</param>
internal sealed record UploadRow(IntVar Minute, IntVar Day, LinearExpr Position);
