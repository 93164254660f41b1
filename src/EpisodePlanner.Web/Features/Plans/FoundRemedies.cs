using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Features.Plans;

/// <summary>Ways out of a silence as they are found, for who can't wait for all of them.</summary>
internal sealed class FoundRemedies : IProgress<Remedy>
{
    private readonly Lock gate = new();
    private readonly List<Remedy> found = [];
    private TaskCompletionSource more = NewMore();

    /// <summary>What was found by now, in the order of finding.</summary>
    public ValueList<Remedy> SoFar
    {
        get
        {
            lock (gate)
            {
                return found.ToValueList();
            }
        }
    }

    /// <summary>Done when the next is found.</summary>
    public Task More
    {
        get
        {
            lock (gate)
            {
                return more.Task;
            }
        }
    }

    /// <summary>One is found; one that was found before, when the trials were begun anew, is not told again.</summary>
    public void Report(Remedy value)
    {
        TaskCompletionSource was;
        lock (gate)
        {
            if (found.Any(one => one.Says == value.Says))
            {
                return;
            }

            found.Add(value);
            (was, more) = (more, NewMore());
        }

        was.SetResult();
    }

    private static TaskCompletionSource NewMore() => new(TaskCreationOptions.RunContinuationsAsynchronously);
}
