namespace EpisodePlanner.Planning;

/// <summary>
/// Marks a list whose order means nothing, down to its inner lists: the workshop file holds it sorted. A list without
/// the mark is a sequence and keeps its order.
/// </summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class AnyOrderAttribute : Attribute;
