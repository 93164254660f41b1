using System.CommandLine;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Plans;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"plan": the plan of a workshop, for people or for programs.</summary>
internal static class PlanCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var now = Moments.Option();
        var format = Formats.Option();
        var command = new Command(
            "plan",
            "Says when the next upload comes and why, which silences go beyond a promise, the one next thing to do, what "
            + "must start tonight, what must be filmed first, and what was assumed.\n\n"
            + "Example: plan demo-seed/harbour-shed.json --now 2026-11-25T18:00:00Z")
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

        var advice = PlanMaking.Advice(opened, surroundings, stop);
        if (asJson)
        {
            DocumentJson.Write(new PlanDocuments(advice.Plan).Of(advice), surroundings.Output);
        }
        else
        {
            PlanText.Write(advice, TextPage.On(surroundings));
        }

        var impossible = Impossible.In(advice.Plan);
        return impossible.Count > 0 ? Complaints.About(file, impossible, surroundings) : ExitCode.Done;
    }
}
