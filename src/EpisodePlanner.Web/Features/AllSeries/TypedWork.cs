using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.AllSeries;

/// <summary>Work written as on paper, as it was typed, with what is wrong.</summary>
/// <param name="Name">The name of a new series; empty where it is for one that exists.</param>
/// <param name="Lines">The lines.</param>
/// <param name="NameProblem">What is wrong with the name.</param>
/// <param name="Problems">What is wrong, line by line.</param>
public sealed record TypedWork(string Name, string Lines, string? NameProblem, ValueList<LineProblem> Problems);

/// <summary>A line that was not understood.</summary>
/// <param name="Line">Its number, from 1; 0 where all are meant.</param>
/// <param name="Text">The line as it was typed.</param>
/// <param name="Says">What is wrong with it and what would be right.</param>
public sealed record LineProblem(int Line, string Text, string Says);
