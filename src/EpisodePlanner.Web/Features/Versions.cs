namespace EpisodePlanner.Web.Features;

/// <summary>Versions as contracts know them.</summary>
internal static class Versions
{
    /// <summary>No workshop is changed more often.</summary>
    public const double Most = 1_000_000_000_000;
}
