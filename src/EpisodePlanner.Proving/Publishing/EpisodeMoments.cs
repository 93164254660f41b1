using EpisodePlanner.Planning;
using EpisodePlanner.Proving.Bench;
using Google.OrTools.Sat;

namespace EpisodePlanner.Proving.Publishing;

/// <summary>The moments from which an episode is available.</summary>
internal static class EpisodeMoments
{
    /// <summary>Ready and led up to, and its fixes done; whichever it has.</summary>
    public static List<LinearExpr> Of(BenchModel bench, AskedEpisode episode)
    {
        var moments = new List<LinearExpr>();
        if (episode.ReadyStage >= 0)
        {
            bench.EndAfter(bench[episode.ReadyStage].Finish, [episode.ReadyStage]);
            moments.Add(bench[episode.ReadyStage].Finish + episode.Lead);
        }

        if (episode.FixesStage >= 0)
        {
            moments.Add(bench[episode.FixesStage].Finish + 0);
        }

        return moments;
    }
}
