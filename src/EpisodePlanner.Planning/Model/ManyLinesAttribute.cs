namespace EpisodePlanner.Planning;

/// <summary>Marks a text that may run over several lines and hold tabs; any other text is one line.</summary>
[AttributeUsage(AttributeTargets.Property)]
public sealed class ManyLinesAttribute : Attribute;
