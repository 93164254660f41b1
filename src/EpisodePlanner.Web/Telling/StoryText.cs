using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.Telling;

/// <summary>Where the stories could be cut otherwise, what each way costs and what it wins.</summary>
internal sealed class StoryText(ISheet page, Plan plan)
{
    private readonly StoryWords words = new(plan);

    /// <summary>All series together.</summary>
    public void Write(StoryAnswer answer)
    {
        page.Heading("Over all series together");
        if (answer.Best is null)
        {
            page.Paragraph("No other cuts or slots weigh less than the ones there are.");
        }

        foreach (var proposal in new[] { answer.Cuts, answer.Held }.OfType<StoryProposal>())
        {
            Write(proposal);
        }

        page.Paragraph(StoryWords.Tried(answer));
        if (answer.Notes.Count > 0)
        {
            page.Heading("What no cut can do");
            foreach (var note in answer.Notes)
            {
                page.Item(note.Says);
            }
        }
    }

    /// <summary>One series.</summary>
    public void Write(SeriesStory story)
    {
        page.Heading($"Cuts of {story.Series.Name}");
        if (story.LastSlot is { } last)
        {
            page.Paragraph(words.Says(last));
        }

        foreach (var place in story.Places)
        {
            page.Item($"{PlanNames.Quote(place.Milestone.Name)}: {Now(place)}");
            foreach (var proposal in new[] { place.Proposal, place.Moved }.OfType<StoryProposal>())
            {
                page.Below($"{words.Says(proposal)}: {StoryWords.Wins(proposal)}; {StoryWords.Costs(proposal)}. {Then(story, proposal)}");
            }
        }

        foreach (var proposal in story.Others)
        {
            page.Item($"{words.Says(proposal)}: {StoryWords.Wins(proposal)}; {StoryWords.Costs(proposal)}.");
            page.Below(Then(story, proposal));
        }
    }

    /// <summary>Where a milestone stands now.</summary>
    public static string Now(CutPlace place)
    {
        var title = PlanNames.Title(place.Episode);
        var now = place.IsCut ? $"{title} ends here" : $"within {title}";
        return place.Stays is { } stays ? $"{now}; {stays}" : now;
    }

    private void Write(StoryProposal proposal)
    {
        page.Item($"{words.Says(proposal)}: {StoryWords.Wins(proposal)}; {StoryWords.Costs(proposal)}.");
        foreach (var series in words.Cuts(proposal))
        {
            page.Below(series);
        }
    }

    private string Then(SeriesStory story, StoryProposal proposal) =>
        $"Out then: {words.Uploads(proposal.Then.Series.Single(outlook => outlook.Series == story.Series.Id))}.";
}
