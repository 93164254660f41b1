namespace EpisodePlanner.Planning;

/// <summary>Something to mind because the work can hurt. It never replaces instructions, codes or licensed trades.</summary>
/// <param name="Topic">What it is about, a few words: "Eyes and face".</param>
/// <param name="Text">What to mind, in sentences of our own.</param>
/// <param name="Source">The public source of the topic, or that there is none.</param>
/// <param name="Standing">How far the source was looked at.</param>
/// <param name="Defers">A sentence that says what comes before this caution.</param>
public sealed record Caution(string Topic, string Text, string Source, SourceStanding Standing, string Defers);

/// <summary>How far the source of a caution was looked at.</summary>
public enum SourceStanding
{
    /// <summary>A public rule, standard or guide that was looked up.</summary>
    LookedUp,

    /// <summary>A public rule, standard or guide named from memory; look it up before relying on the number.</summary>
    FromMemory,

    /// <summary>Follows from a standard without being in it word for word.</summary>
    Derived,

    /// <summary>No public standard was found; what careful people in the trade do.</summary>
    CommonPractice,
}

/// <summary>What a caution gives way to.</summary>
internal static class Deferral
{
    public const string Sentence = "The manufacturer's instructions, local codes and licensed trades come first.";
}
