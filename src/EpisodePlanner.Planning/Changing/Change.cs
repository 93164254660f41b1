namespace EpisodePlanner.Planning;

/// <summary>
/// One change to a workshop, as it is asked for, stored and undone. The kinds are those of this assembly; how each is
/// written is told by <see cref="Files.ChangeFile"/>.
/// </summary>
public abstract record Change
{
    private protected Change()
    {
    }

    /// <summary>What the change touches, each once.</summary>
    public abstract IEnumerable<Aggregate> Touches();

    /// <summary>The single changes that it is made of, in order; itself, unless it is a batch.</summary>
    public virtual IEnumerable<Change> Unfolded() => [this];

    /// <summary>Makes the change without looking at the rules; null, with reasons, where it makes no sense.</summary>
    internal abstract Step? Take(Workshop workshop, ReasonList reasons);
}

/// <summary>A change that was made: the workshop after it, and the change that leads back.</summary>
internal sealed record Step(Workshop After, Change Inverse);
