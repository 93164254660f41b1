using EpisodePlanner.Planning;

namespace EpisodePlanner.Data.Writing;

/// <summary>What a writer means to do to a workshop as it is; thought over again where somebody else was quicker.</summary>
internal sealed record Intent(Change Change, string Who, Act Act)
{
    /// <summary>What must be so.</summary>
    public Expectation Expects { get; init; } = Expectation.None;

    /// <summary>Under which key a repetition is known.</summary>
    public RequestKey? Key { get; init; }

    /// <summary>The change that is undone or redone.</summary>
    public long? Of { get; init; }

    /// <summary>What the history says; told from the change where null.</summary>
    public string? Says { get; init; }

    /// <summary>What is written in the same transaction, given the version that the workshop gets.</summary>
    public Func<PlannerContext, long, Task>? Also { get; init; }

    /// <summary>Whether a version is made even where nothing differs.</summary>
    public bool IsMadeAnyway { get; init; }

    /// <summary>Whether the workshop is deleted with it.</summary>
    public bool DeletesWorkshop { get; init; }
}

/// <summary>An intent, or what it came to already.</summary>
internal sealed record Decision(Intent? Intent, EditOutcome? Outcome)
{
    public static implicit operator Decision(Intent intent) => new(intent, null);

    public static implicit operator Decision(EditOutcome outcome) => new(null, outcome);
}
