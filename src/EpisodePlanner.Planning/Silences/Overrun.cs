using NodaTime;

namespace EpisodePlanner.Planning;

/// <summary>A promise that was not kept in time, or will not be.</summary>
/// <param name="Due">The last day on which an upload would have kept it.</param>
/// <param name="Kept">The day of the upload that came too late; null where none has come.</param>
/// <param name="Days">The days beyond, 1 or more; up to the last day looked at where none has come.</param>
public sealed record Overrun(LocalDate Due, LocalDate? Kept, int Days);
