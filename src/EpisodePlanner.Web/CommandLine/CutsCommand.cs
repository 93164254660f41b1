using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Story;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"cuts": where the stories could be cut otherwise, and what each way costs and wins.</summary>
internal static class CutsCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var (file, series, now, format) = (CommonParts.File(), Series(), Moments.Option(), Formats.Option());
        var command = new Command(
            "cuts",
            "Says where the stories could be cut otherwise: the cuts and slots of all series that together leave the least silence, "
            + "then every place of each series, each planned, with the hours it costs and what it moves later. Changes nothing.\n\n"
            + "Example: cuts demo-seed/harbour-shed.json --series ferry")
        {
            file,
            series,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(now),
            result.GetValue(series),
            Formats.IsJson(result.GetValue(format)),
            surroundings,
            stop)));
        return command;
    }

    private static Option<string?> Series() => new("--series")
    {
        HelpName = "ID",
        Description = "Looks at the places of this series only",
    };

    private static int Run(string file, Instant? now, string? series, bool asJson, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var line = new ProgressLine(surroundings);
        var plan = Planner.Make(new PlanRequest(opened.Workshop, opened.Now), line.Of("planning"), stop);
        var asked = plan.Series.Select(outlook => outlook.Series).Where(id => series is null || $"{id}" == series).ToList();
        if (asked.Count == 0 && series is not null)
        {
            line.End();
            return Complaints.About(file, [NoSeries(plan, series)], surroundings);
        }

        var answer = StoryAnswer.Of(plan, progress: line.Of("cutting all series together"), stop: stop);
        var stories = asked.Select(id => SeriesStory.Of(plan, id, line.Of($"cutting {id}"), stop)).OfType<SeriesStory>().ToList();
        line.End();
        stop.ThrowIfCancellationRequested();
        return Print(answer, stories, asJson, surroundings);
    }

    private static Reason NoSeries(Plan plan, string series) => new(
        "$.series",
        $"There is no series '{series}' that goes on; there are {string.Join(", ", plan.Series.Select(outlook => outlook.Series))}.");

    private static int Print(StoryAnswer answer, List<SeriesStory> stories, bool asJson, Surroundings surroundings)
    {
        if (asJson)
        {
            DocumentJson.Write(new CutsDocuments(answer.Plan).Of(answer, stories), surroundings.Output);
            return ExitCode.Done;
        }

        var text = new StoryText(TextPage.On(surroundings), answer.Plan);
        text.Write(answer);
        stories.ForEach(text.Write);
        return ExitCode.Done;
    }
}
