using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>The days between two public uploads of one series, or of the whole channel, by local date.</summary>
/// <param name="From">The day of the upload it follows.</param>
/// <param name="To">The day of the upload that ends it; null where none does yet.</param>
/// <param name="Days">Its days, up to the last day looked at where it is open.</param>
public sealed record Silence(LocalDate From, LocalDate? To, int Days)
{
    /// <summary>Whether no upload ends it yet.</summary>
    public bool OpenEnded => To is null;
}
