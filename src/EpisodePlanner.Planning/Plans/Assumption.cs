namespace EpisodePlanner.Planning;

/// <summary>Something that nobody typed and the planner took for granted.</summary>
/// <param name="Name">A short name that stays the same: "tail".</param>
/// <param name="Where">The member that would say it.</param>
/// <param name="Says">What was assumed, in words.</param>
/// <param name="Ask">The question whose answer would replace it.</param>
/// <param name="MovesMinutes">
/// By how much the next upload moves when it is replaced by <paramref name="Tried"/>, measured by planning again;
/// negative where it moves earlier, null where that was not measured.
/// </param>
/// <param name="Tried">The other answer that was tried, in words.</param>
public sealed record Assumption(string Name, string Where, string Says, string Ask, int? MovesMinutes, string Tried);
