using EpisodePlanner.Trials.Asking;

namespace EpisodePlanner.Trials.Killing;

/// <summary>A count that a writer raises: what the server said yes to, and what it was asked when it was killed.</summary>
internal sealed class Promise(string of)
{
    private int acknowledged;
    private int? asked;

    /// <summary>How often the server said yes.</summary>
    public int Acknowledged { get; private set; }

    /// <summary>How many changes in flight came to be.</summary>
    public int Kept { get; private set; }

    /// <summary>How many changes in flight did not.</summary>
    public int Lost { get; private set; }

    /// <summary>Asks for the next count; whoever is cut off does not come back.</summary>
    public async Task Raise(Func<int, Task> ask)
    {
        asked = acknowledged + 1;
        await ask(asked.Value);
        acknowledged = asked.Value;
        Acknowledged++;
        asked = null;
    }

    /// <summary>Looks at what is there after a restart.</summary>
    /// <exception cref="TrialException">It is neither what was said yes to nor what was asked.</exception>
    public void Check(int found)
    {
        if (found != acknowledged && found != asked)
        {
            throw new TrialException($"{of} stands at {found}; the server had said yes to {acknowledged} and was asked {asked}.");
        }

        Kept += found == asked ? 1 : 0;
        Lost += asked is not null && found != asked ? 1 : 0;
        (acknowledged, asked) = (found, null);
    }
}
