using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Features;
using EpisodePlanner.Web.Features.Supposes;
using EpisodePlanner.Web.Telling;
using NodaTime;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"suppose": what would differ if some changes were made.</summary>
internal static class SupposeCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var (file, changes, now, format) = (CommonParts.File(), ChangesFiles(), Moments.Option(), Formats.Option());
        var command = new Command(
            "suppose",
            "Says what would differ from the plan if some changes were made: dates, silences, hours, and what moves in the next "
            + "seven days; several files stand beside the same plan. Changes nothing. A file holds one change, or a batch of them, as "
            + "the API takes them: { \"kind\": \"series\", \"id\": \"kite\", \"to\": { \u2026 } }.\n\n"
            + "Example: suppose workshop.json ill-for-a-week.json")
        {
            file,
            changes,
            now,
            format,
        };
        command.SetAction((result, stop) => Task.FromResult(Run(
            result.GetValue(file)!,
            result.GetValue(changes)!,
            result.GetValue(now),
            Formats.IsJson(result.GetValue(format)),
            surroundings,
            stop)));
        return command;
    }

    private static Argument<string[]> ChangesFiles() => new("CHANGES")
    {
        Description = "Files with changes, JSON in UTF-8",
        Arity = ArgumentArity.OneOrMore,
    };

    private static int Run(string file, string[] files, Instant? now, bool asJson, Surroundings surroundings, CancellationToken stop)
    {
        if (OpenedWorkshop.WithWork(file, now, surroundings) is not { } opened)
        {
            return ExitCode.BadInput;
        }

        var changes = files.Select(name => (Name: name, Change: Read(name, opened.Workshop, surroundings))).ToList();
        if (changes.Any(change => change.Change is null))
        {
            return ExitCode.BadInput;
        }

        var line = new ProgressLine(surroundings);
        var plan = Planner.Make(new PlanRequest(opened.Workshop, opened.Now), line.Of("planning"), stop);
        var supposed = changes.Select(change => (
            Name: Path.GetFileNameWithoutExtension(change.Name), Change: change.Change!, Then: Replanning.After(plan, change.Change!, stop)!)).ToList();
        line.End();
        stop.ThrowIfCancellationRequested();
        if (asJson)
        {
            var documents = new DifferenceDocuments(plan);
            DocumentJson.Write(
                documents.Of(supposed.Select(one => documents.Of(one.Name, one.Change, new PlanDifference(plan, one.Then), []))),
                surroundings.Output);
            return ExitCode.Done;
        }

        var page = TextPage.On(surroundings);
        supposed.ForEach(one => DifferenceText.Write(page, one.Name, new PlanDifference(plan, one.Then)));
        return ExitCode.Done;
    }

    /// <summary>A change that fits the workshop; null, with every reason on the error output, where it is none.</summary>
    private static Change? Read(string file, Workshop workshop, Surroundings surroundings)
    {
        if (FileBytes.Read(file, out var problem) is not { } bytes)
        {
            Complaints.About(file, [new Reason("", problem)], surroundings);
            return null;
        }

        var read = ChangeFile.Read(bytes);
        var reasons = !read.IsRead ? read.Reasons : (Changes.Apply(workshop, read.Thing) as Refused)?.Reasons ?? [];
        if (reasons.Count == 0)
        {
            return read.Thing;
        }

        Complaints.About(file, reasons, surroundings);
        return null;
    }
}
