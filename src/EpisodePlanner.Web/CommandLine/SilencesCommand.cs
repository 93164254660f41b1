using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.CouldPublish;
using EpisodePlanner.Web.Features.Silences;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"silences": where a promise breaks, why, and what can be done about it.</summary>
internal static class SilencesCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var (file, now, format) = (CommonParts.File(), Moments.Option(), Formats.Option());
        var command = new Command(
            "silences",
            "Says which series, or the channel, will be silent beyond its promise, with the chain that causes it and what can be "
            + "done: other cuts, more hands, open days, work put off, resting openly; each planned, with what it costs. And what each series "
            + "could publish now. Changes nothing.\n\nExample: silences demo-seed/harbour-shed.json")
        {
            file,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!, result.GetValue(now), Formats.IsJson(result.GetValue(format)), surroundings, stop)));
        return command;
    }

    private static int Run(string file, Instant? now, bool asJson, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var line = new ProgressLine(surroundings);
        var plan = Planner.Make(new PlanRequest(opened.Workshop, opened.Now), line.Of("planning"), stop);
        var silences = SilencesAhead.Of(plan)
            .Select(outlook => SilenceRemedies.Of(plan, outlook.Series, line.Of($"trying what helps {outlook.Name}"), stop: stop))
            .OfType<SilenceRemedies>()
            .ToList();
        var publishable = plan.Series.Select(outlook => PublishNow.Of(plan, outlook.Series, stop)).OfType<PublishNow>().ToList();
        line.End();
        if (asJson)
        {
            DocumentJson.Write(new SilenceDocuments(plan).Of(silences) with { CouldPublish = PublishNowDocuments.Of(plan, publishable).Series }, surroundings.Output);
        }
        else
        {
            var page = TextPage.On(surroundings);
            Print(silences, page);
            PublishNowText.Write(page, publishable);
        }

        return stop.IsCancellationRequested
            ? Complaints.Stopped("what is told above was tried; there is more to try.", surroundings)
            : ExitCode.Done;
    }

    private static void Print(List<SilenceRemedies> silences, TextPage page)
    {
        if (silences.Count == 0)
        {
            page.Heading("Silences beyond a promise");
            page.Paragraph("None, as far as uploads are planned.");
        }

        silences.ForEach(silence => RemedyText.Write(page, silence));
    }
}
