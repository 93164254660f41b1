namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>The body of an endpoint, for its description.</summary>
/// <param name="Type">The record that it holds.</param>
internal sealed record BodyOf(Type Type);

/// <summary>The query of an endpoint, for its description.</summary>
/// <param name="Type">The record with a member for each parameter.</param>
internal sealed record QueryOf(Type Type);

/// <summary>Headers that an endpoint takes, for its description.</summary>
internal sealed record TakesHeaders(params string[] Names);

/// <summary>An answer that an endpoint gives, for its description.</summary>
/// <param name="Status">The status.</param>
/// <param name="Type">What the body is of; null for none.</param>
/// <param name="ContentTypes">The types of the body.</param>
internal sealed record Gives(int Status, Type? Type, params string[] ContentTypes);

/// <summary>Problems with which an endpoint may refuse, for its description.</summary>
internal sealed record Refuses(params ProblemType[] Types);
