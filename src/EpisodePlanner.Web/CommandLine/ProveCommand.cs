using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Scheduling;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Proofs;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"prove": how soon any plan could publish an episode, or how much better the whole plan could be.</summary>
internal static class ProveCommand
{
    private const int MostSeconds = 3600;

    public static Command Create(Surroundings surroundings)
    {
        var (file, now, format, seconds) = (CommonParts.File(), Moments.Option(), Formats.Option(), Seconds());
        var (episode, whole) = (CommonParts.Episode(required: false), Whole());
        var command = new Command(
            "prove",
            "Says before which date no plan can publish an episode, and why: which hours, which work or which chain leaves no "
            + "earlier one. With --whole it says how much better any plan could be, or that none is. Stopped from the keyboard it "
            + "says what is proved by then.\n\n"
            + "Example: prove demo-seed/harbour-shed.json --episode ferry-e8")
        {
            file,
            episode,
            whole,
            seconds,
            now,
            format,
        };
        command.Validators.Add(result =>
        {
            if (result.GetResult(episode) is null != result.GetValue(whole))
            {
                result.AddError("prove: say either which episode is meant, with --episode ID, or --whole for the whole plan.");
            }
        });
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(now),
            new Asked(result.GetValue(episode), ProofLimits.OfSeconds(result.GetValue(seconds)), Formats.IsJson(result.GetValue(format))),
            surroundings,
            stop)));
        return command;
    }

    private static Option<bool> Whole() => new("--whole")
    {
        Description = "Ask about the whole plan: lateness, silences, moved starts and the end of the work",
    };

    private static Option<int> Seconds()
    {
        var seconds = new Option<int>("--seconds")
        {
            HelpName = "S",
            Description = "About so many seconds of work, for the whole plan four times; more may prove more",
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
        var told = asked.Episode is { } episode
            ? OfEpisode(plan, episode, asked.Limits, line.Of("proving"), surroundings.Prover, stop)
            : OfPlan(plan, asked.Limits, line.Of("proving"), surroundings.Prover, stop);
        line.End();
        if (told is null)
        {
            return Complaints.About(file, [CommonParts.NoEpisode(plan, asked.Episode!)], surroundings);
        }

        told.Write(asked.AsJson, surroundings);
        return stop.IsCancellationRequested
            ? Complaints.Stopped("what is told above is proved; more time may prove more.", surroundings)
            : ExitCode.Done;
    }

    private static Told? OfEpisode(
        Plan plan, string typed, ProofLimits limits, IProgress<double> progress, IPlanProver prover, CancellationToken stop)
    {
        if (!Id.IsValid(typed) || PlanProofs.OfEpisode(plan, new Id(typed), prover, limits, progress, stop) is not { } proof)
        {
            return null;
        }

        var words = new ProofWords(plan);
        return new Told(
            ProofDocuments.Of(plan, proof), new PlanNames(plan).Full(proof.Episode), [words.Bound(proof), words.Reached(proof)], []);
    }

    private static Told OfPlan(
        Plan plan, ProofLimits limits, IProgress<double> progress, IPlanProver prover, CancellationToken stop)
    {
        var proof = PlanProofs.OfPlan(plan, prover, limits, progress, stop);
        var (document, words) = (PlanProofDocument.Of(plan, proof), new PlanProofWords(plan));
        string[] said = proof is null ? [document.Says] : [document.Says, .. words.Remarks(proof), PlanProofWords.Compared];
        return new Told(document, "The whole plan", said, [.. document.Parts.Select(part => part.Says)]);
    }

    private sealed record Asked(string? Episode, ProofLimits Limits, bool AsJson);

    /// <summary>An answer, for programs and for people.</summary>
    private sealed record Told(IComputedDocument Document, string Heading, IReadOnlyList<string> Paragraphs, IReadOnlyList<string> Items)
    {
        public void Write(bool asJson, Surroundings surroundings)
        {
            if (asJson)
            {
                DocumentJson.Write(Document, surroundings.Output);
                return;
            }

            var page = TextPage.On(surroundings);
            page.Heading(Heading);
            foreach (var paragraph in Paragraphs)
            {
                page.Paragraph(paragraph);
            }

            foreach (var item in Items)
            {
                page.Item(item);
            }
        }
    }
}
