using System.CommandLine;
using System.Text;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"export": a workshop of the database as a file, whole and canonical.</summary>
internal static class ExportCommand
{
    private const string WorkshopOption = "--workshop";

    public static Command Create(Surroundings surroundings)
    {
        var workshop = new Option<string?>(WorkshopOption)
        {
            HelpName = "ID",
            Description = "The workshop's id; may be left out where there is one alone",
        };
        var output = new Option<string?>("--output")
        {
            HelpName = "FILE",
            Description = "The file to write, in the place of one that is there; the standard output where left out",
        };
        var demo = Configured.Demo("From the demo's database");
        var command = new Command("export", "Writes a workshop of the database as a workshop file.\n\nExample: export --output workshop.json")
        {
            workshop,
            output,
            demo,
        };
        command.SetAction((result, stop) => Run(
            result.GetValue(workshop), result.GetValue(output), result.GetValue(demo), surroundings, stop));
        return command;
    }

    private static async Task<int> Run(string? id, string? output, bool isDemo, Surroundings surroundings, CancellationToken stop)
    {
        if (Configured.Read(isDemo, surroundings) is not { } settings)
        {
            return ExitCode.BadInput;
        }

        var store = await OpenedStore.Open(settings, surroundings.Clock, stop).ConfigureAwait(false);
        await using (store.ConfigureAwait(false))
        {
            var (workshop, problem) = await Choose(store.Workshops, id, stop).ConfigureAwait(false);
            return workshop is null
                ? Complaints.About([new Reason(WorkshopOption, problem)], surroundings)
                : Write(WorkshopFile.Write(workshop), output, surroundings);
        }
    }

    private static async Task<(Workshop? Workshop, string Problem)> Choose(WorkshopStore store, string? id, CancellationToken stop)
    {
        var lines = await store.List(stop).ConfigureAwait(false);
        if (id is null && lines.Count == 0)
        {
            return (null, "There is no workshop yet; \u201cimport FILE\u201d brings one in.");
        }

        if ((id is null && lines.Count > 1) || (id is not null && lines.All(line => line.Id.ToString() != id)))
        {
            var there = string.Join(", ", lines.Select(line => $"{line.Id} (\u201c{line.Name}\u201d)"));
            return (null, id is null ? $"Say which one: {there}." : $"There is no workshop '{id}'. There is: {(there.Length == 0 ? "none" : there)}.");
        }

        var found = await store.Find(id is null ? lines[0].Id : new Id(id), stop).ConfigureAwait(false);
        return (found.Found?.Workshop, "The workshop was deleted this moment.");
    }

    private static int Write(byte[] file, string? output, Surroundings surroundings)
    {
        if (output is null)
        {
            surroundings.Output.Write(Encoding.UTF8.GetString(file));
            return ExitCode.Done;
        }

        return WholeFile.Write(output, file) is { } problem
            ? Complaints.About(output, [new Reason("", problem)], surroundings)
            : ExitCode.Done;
    }
}
