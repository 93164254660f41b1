namespace EpisodePlanner.Web.Features.Plans;

/// <summary>A document that is computed and never sent back: it is described by its type, not by the shape of a file.</summary>
public interface IComputedDocument;
