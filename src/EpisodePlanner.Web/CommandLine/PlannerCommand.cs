using System.CommandLine;
using System.CommandLine.Help;
using EpisodePlanner.Data;
using EpisodePlanner.Web.CommandLine.Text;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>The command line: one command for each question.</summary>
public static class PlannerCommand
{
    /// <summary>How long a command may take to stop from the keyboard; the server takes its own time.</summary>
    private static readonly TimeSpan UsualTermination = TimeSpan.FromSeconds(2);

    /// <summary>Runs one command.</summary>
    /// <param name="arguments">What was typed after the program's name.</param>
    /// <param name="surroundings">The console and the clock.</param>
    /// <param name="stop">Stops long work.</param>
    /// <returns>An <see cref="ExitCode"/>.</returns>
    public static async Task<int> Run(IReadOnlyList<string> arguments, Surroundings surroundings, CancellationToken stop = default)
    {
        var result = Create(surroundings).Parse(arguments, new ParserConfiguration { ResponseFileTokenReplacer = null });
        try
        {
            return result.Errors.Count > 0 && result.Action is not HelpAction
                ? Complaints.AboutUse(result, surroundings)
                : await result.InvokeAsync(Configuration(result, surroundings), stop).ConfigureAwait(false);
        }
        catch (OperationCanceledException)
        {
            return Complaints.Stopped("there is nothing to tell yet.", surroundings);
        }
        catch (StorageTroubleException trouble)
        {
            return Complaints.About(trouble, surroundings);
        }
        catch (IOException)
        {
            // Whoever read the output has gone, as after "| head"; there is nobody left to tell.
            return ExitCode.Stopped;
        }
        catch (Exception e)
        {
            return Complaints.AboutOurselves(e, surroundings);
        }
        finally
        {
            await Flush(surroundings.Output).ConfigureAwait(false);
        }
    }

    private static RootCommand Create(Surroundings surroundings)
    {
        var root = new RootCommand(
            "Plans the episodes of a maker's builds: when the next upload comes and why, which silence goes beyond a "
            + "promise, what to do next, what must start tonight, what must be filmed first.\n\n"
            + "Without a command it serves the workshops to a browser and to other programs.\n\n"
            + "Example: plan demo-seed/harbour-shed.json")
        {
            ServeCommand.Create(surroundings),
            ImportCommand.Create(surroundings),
            ExportCommand.Create(surroundings),
            PlanCommand.Create(surroundings),
            WhyCommand.Create(surroundings),
            SilencesCommand.Create(surroundings),
            SupposeCommand.Create(surroundings),
            CutsCommand.Create(surroundings),
            CadenceCommand.Create(surroundings),
            ProveCommand.Create(surroundings),
            CheckCommand.Create(surroundings),
            OutlineCommand.Create(surroundings),
            LetterCommand.Create(surroundings),
            HealthCommand.Create(surroundings),
        };
        ServeCommand.MakeUsual(root, surroundings);
        if (root.Options.OfType<HelpOption>().Single().Action is HelpAction help)
        {
            help.MaxWidth = TextPage.Width;
        }

        return root;
    }

    private static InvocationConfiguration Configuration(ParseResult result, Surroundings surroundings) => new()
    {
        Output = surroundings.Output,
        Error = surroundings.Error,
        EnableDefaultExceptionHandler = false,
        ProcessTerminationTimeout = ServeCommand.Is(result) ? null : UsualTermination,
    };

    private static async Task Flush(TextWriter output)
    {
        try
        {
            await output.FlushAsync().ConfigureAwait(false);
        }
        catch (IOException)
        {
            // The same: nobody reads any more.
        }
    }
}
