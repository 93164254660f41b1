using EpisodePlanner.Scheduling.Engine;

namespace EpisodePlanner.Scheduling.Lists;

/// <summary>
/// Shares a budget between lists of the kernel's own making and lists crossed: whichever found better schedules of late
/// gets more, and neither less than an eighth.
/// </summary>
internal sealed class Shares
{
    private const int Least = 8;
    private const int Memory = 48;

    private int own = Least;
    private int crossed = Least;

    /// <summary>Whether the next list is one of the kernel's own.</summary>
    public bool IsForOwn(SplitMix dice) => dice.Below(own + crossed) < own;

    /// <summary>Learns whether a list led to the best schedule so far.</summary>
    public void Learn(bool ofOwn, bool wasBest)
    {
        if (!wasBest)
        {
            return;
        }

        ref var winner = ref ofOwn ? ref own : ref crossed;
        winner += Least;
        if (own + crossed > Memory)
        {
            (own, crossed) = (Math.Max(Least - 2, own * 3 / 4), Math.Max(Least - 2, crossed * 3 / 4));
        }
    }
}
