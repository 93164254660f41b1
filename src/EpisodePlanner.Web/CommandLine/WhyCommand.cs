using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Why;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"why": why an episode goes out when it does, and what would bring it forward.</summary>
internal static class WhyCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var (file, episode, now, format) = (CommonParts.File(), CommonParts.Episode(), Moments.Option(), Formats.Option());
        var command = new Command(
            "why",
            "Says why an episode goes out when it does; what one more station, another open day, shorter work or looser "
            + "publishing would win, each tried by planning again; what can wait a day; which stations are contested.\n\n"
            + "Example: why demo-seed/harbour-shed.json --episode ferry-e8")
        {
            file,
            episode,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(now),
            result.GetValue(episode)!,
            Formats.IsJson(result.GetValue(format)),
            surroundings,
            stop)));
        return command;
    }

    private static int Run(
        string file, Instant? now, string episode, bool asJson, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var plan = PlanMaking.Plan(opened, surroundings, stop);
        var line = new ProgressLine(surroundings);
        var why = Id.IsValid(episode) ? EpisodeWhy.Of(plan, new Id(episode), line.Of("planning again"), stop) : null;
        line.End();
        if (why is null)
        {
            return Complaints.About(file, [CommonParts.NoEpisode(plan, episode)], surroundings);
        }

        Print(why, asJson, surroundings);
        return why.IsComplete
            ? ExitCode.Done
            : Complaints.Stopped($"{why.Tried} of {why.ToTry} differences were tried; what is told above comes from these.", surroundings);
    }

    private static void Print(EpisodeWhy why, bool asJson, Surroundings surroundings)
    {
        if (asJson)
        {
            DocumentJson.Write(new WhyDocuments(why.Plan).Of(why), surroundings.Output);
        }
        else
        {
            new WhyText(TextPage.On(surroundings), why).Write();
        }
    }
}
