using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Proofs;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"prove": how soon any plan could publish an episode.</summary>
internal static class ProveCommand
{
    private const int MostSeconds = 3600;

    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var now = Moments.Option();
        var format = Formats.Option();
        var episode = CommonParts.Episode();
        var seconds = Seconds();
        var command = new Command(
            "prove",
            "Says before which date no plan can publish an episode, and why: which hours, which work or which chain leaves no "
            + "earlier one. Stopped from the keyboard it says what is proved by then.\n\n"
            + "Example: prove demo-seed/harbour-shed.json --episode ferry-e8")
        {
            file,
            episode,
            seconds,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(now),
            new Asked(result.GetValue(episode)!, result.GetValue(seconds), Formats.IsJson(result.GetValue(format))),
            surroundings,
            stop)));
        return command;
    }

    private static Option<int> Seconds()
    {
        var seconds = new Option<int>("--seconds")
        {
            HelpName = "S",
            Description = "About so many seconds of work; more may prove a later date",
            DefaultValueFactory = _ => ProofQuery.UsualSeconds,
        };
        seconds.Validators.Add(result =>
        {
            if (result.Tokens.Count > 0 && (!int.TryParse(result.Tokens[0].Value, out var typed) || typed is < 1 or > MostSeconds))
            {
                result.AddError($"--seconds: '{result.Tokens[0].Value}' must be a whole number from 1 to {MostSeconds}.");
            }
        });
        return seconds;
    }

    private static int Run(string file, Instant? now, Asked asked, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var plan = PlanMaking.Plan(opened, surroundings, stop);
        var line = new ProgressLine(surroundings);
        var proof = Id.IsValid(asked.Episode)
            ? PlanProofs.OfEpisode(
                plan, new Id(asked.Episode), surroundings.Prover, ProofLimits.OfSeconds(asked.Seconds), line.Of("proving"), stop)
            : null;
        line.End();
        if (proof is null)
        {
            return Complaints.About(file, [CommonParts.NoEpisode(plan, asked.Episode)], surroundings);
        }

        Write(plan, proof, asked.AsJson, surroundings);
        return stop.IsCancellationRequested ? ExitCode.Stopped : ExitCode.Done;
    }

    private static void Write(Plan plan, EpisodeProof proof, bool asJson, Surroundings surroundings)
    {
        if (asJson)
        {
            DocumentJson.Write(ProofDocuments.Of(plan, proof), surroundings.Output);
            return;
        }

        var (page, words) = (TextPage.On(surroundings), new ProofWords(plan));
        page.Heading(new PlanNames(plan).Full(proof.Episode));
        page.Paragraph(words.Bound(proof));
        page.Paragraph(words.Reached(proof));
    }

    private sealed record Asked(string Episode, int Seconds, bool AsJson);
}
