using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>Work written as on paper, as it was typed, with what is wrong.</summary>
/// <param name="Name">The name of a new series; empty where it is for one that exists.</param>
/// <param name="Lines">The lines.</param>
/// <param name="NameProblem">What is wrong with the name.</param>
/// <param name="Problems">What is wrong, line by line.</param>
public sealed record TypedWork(string Name, string Lines, string? NameProblem, ValueList<WorkLineProblem> Problems);
