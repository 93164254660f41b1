using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Forms;

/// <summary>The names of records in the schema.</summary>
public static class FormDefinitions
{
    /// <summary>The record of a kind of things: "workTask" for tasks.</summary>
    public static string Of(ThingKind kind) => char.ToLowerInvariant(kind.Type.Name[0]) + kind.Type.Name[1..];
}
