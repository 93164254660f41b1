using EpisodePlanner.Planning;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Pages;

namespace EpisodePlanner.Web.Features.Story;

/// <summary>A proposal that is taken, as it is sent.</summary>
internal sealed class TakeForm
{
    /// <summary>What sort of change.</summary>
    public StoryMove Move { get; init; }

    /// <summary>The series; empty for all together.</summary>
    public string? Series { get; init; }

    /// <summary>The milestone or log entry it is about; empty for none.</summary>
    public string? About { get; init; }

    /// <summary>The version of the workshop on the page.</summary>
    public long Base { get; init; }

    /// <summary>The page to go back to.</summary>
    public string Back(Paths paths) => paths.Cuts(Id.IsValid(Series) ? new Id(Series!) : null);

    /// <summary>The proposal; null where the plan has it no more.</summary>
    public async Task<StoryProposal?> Find(MadePlan made, CancellationToken stop)
    {
        if (Id.IsValid(Series))
        {
            var story = await made.Story(new Id(Series!), stop);
            return story?.Proposals.FirstOrDefault(proposal => proposal.Move == Move && $"{proposal.About}" == (About ?? ""));
        }

        var answer = await made.Story(stop);
        return Move == StoryMove.TogetherHeld ? answer.Held : Move == StoryMove.Together ? answer.Cuts : null;
    }
}

/// <summary>A cut that is pinned or let go, as it is sent.</summary>
internal sealed class PinForm
{
    /// <summary>The episode.</summary>
    public string? Episode { get; init; }

    /// <summary>Whether it is pinned then.</summary>
    public bool Pinned { get; init; }

    /// <summary>The version of the workshop on the page.</summary>
    public long Base { get; init; }
}
