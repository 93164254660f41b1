using System.CommandLine;
using EpisodePlanner.Web.CommandLine.Text;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"serve", also where no command is named: the workshops for a browser and for other programs.</summary>
internal static class ServeCommand
{
    private const string Name = "serve";

    public static Command Create(Surroundings surroundings)
    {
        var command = new Command(
            Name,
            "Serves the workshops at http://127.0.0.1:5080 until it is stopped; the same as no command.\n\n"
            + $"Settings are read from the environment:\n\n{SettingsText.Write()}\nExample: serve --demo");
        Act(command, surroundings);
        return command;
    }

    /// <summary>Makes it what is done where no command is named.</summary>
    public static void MakeUsual(RootCommand root, Surroundings surroundings) => Act(root, surroundings);

    /// <summary>Whether this is what was asked for.</summary>
    public static bool Is(ParseResult result) => result.CommandResult.Command is RootCommand or { Name: Name };

    private static void Act(Command command, Surroundings surroundings)
    {
        var demo = Configured.Demo("Serve the demo workshop, moved to today, from a database of its own");
        command.Options.Add(demo);
        command.SetAction((result, stop) => Run(result.GetValue(demo), surroundings, stop));
    }

    private static async Task<int> Run(bool isDemo, Surroundings surroundings, CancellationToken stop)
    {
        if (Configured.Read(isDemo, surroundings) is not { } settings)
        {
            return ExitCode.BadInput;
        }

        var app = PlannerServer.Build(settings, surroundings.Clock);
        await using (app.ConfigureAwait(false))
        {
            if (await Listening.Start(app, settings, stop).ConfigureAwait(false) is { } problem)
            {
                return Complaints.About([problem], surroundings);
            }

            await Say(app, settings, surroundings).ConfigureAwait(false);
            await app.WaitForShutdownAsync(stop).ConfigureAwait(false);
        }

        return ExitCode.Done;
    }

    private static async Task Say(WebApplication app, ServerSettings settings, Surroundings surroundings)
    {
        var trouble = await PlannerServer.Prepared(app).ConfigureAwait(false);
        var lines = ReadyText.Write(app.Urls, settings, trouble);
        if (settings.LogAsJson)
        {
            // A program reads the output; a line of another form would break it.
            foreach (var line in lines)
            {
                ReadyText.Log(app.Logger, line);
            }

            return;
        }

        foreach (var line in lines)
        {
            await surroundings.Output.WriteLineAsync(line).ConfigureAwait(false);
        }

        await surroundings.Output.FlushAsync(CancellationToken.None).ConfigureAwait(false);
    }
}
