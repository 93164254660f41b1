using System.CommandLine;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Planning.Files;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Composition;
using EpisodePlanner.Web.Serving.Requests;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"import": a workshop file becomes a new workshop of the database.</summary>
internal static class ImportCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var demo = Configured.Demo("Into the demo's database");
        var command = new Command(
            "import",
            "Puts a workshop file into the database as a new workshop, whole or not at all, and says its id.\n\n"
            + "Example: import demo-seed/first-lines.json")
        {
            file,
            demo,
        };
        command.SetAction((result, stop) => Run(result.GetValue(file)!, result.GetValue(demo), surroundings, stop));
        return command;
    }

    private static async Task<int> Run(string file, bool isDemo, Surroundings surroundings, CancellationToken stop)
    {
        if (FileBytes.Read(file, out var problem) is not { } bytes)
        {
            return Complaints.About(file, [new Reason("", problem)], surroundings);
        }

        var read = WorkshopFile.Read(bytes);
        if (!read.IsRead)
        {
            return Complaints.About(file, read.Reasons, surroundings);
        }

        if (Configured.Read(isDemo, surroundings) is not { } settings)
        {
            return ExitCode.BadInput;
        }

        var store = await OpenedStore.Open(settings, surroundings.Clock, stop).ConfigureAwait(false);
        await using (store.ConfigureAwait(false))
        {
            var outcome = await store.Workshops.Create(read.Thing, Makers.Of(read.Thing), null, stop).ConfigureAwait(false);
            return Say(outcome, file, settings, surroundings);
        }
    }

    private static int Say(EditOutcome outcome, string file, ServerSettings settings, Surroundings surroundings)
    {
        if (outcome is Broken broken)
        {
            return Complaints.About(file, broken.Reasons, surroundings);
        }

        var made = (Made)outcome;
        var page = TextPage.On(surroundings);
        page.Heading($"“{made.Now.Workshop.Name}” is kept in {settings.DataPlace}.");
        page.Paragraph($"{WorkshopCounts.Of(made.Now.Workshop)}.");
        page.Paragraph($"Its id: {made.Now.Id}");
        return ExitCode.Done;
    }
}
