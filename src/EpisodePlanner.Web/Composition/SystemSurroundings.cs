using System.Collections;
using System.Text;
using EpisodePlanner.Proving.Publishing;
using EpisodePlanner.Web.CommandLine;

namespace EpisodePlanner.Web.Composition;

/// <summary>The console and the clock of the machine the process runs on.</summary>
public static class SystemSurroundings
{
    /// <summary>The surroundings of this process. Nothing else reads the system clock.</summary>
    public static Surroundings Create()
    {
        var plain = new UTF8Encoding(encoderShouldEmitUTF8Identifier: false);
        return new Surroundings
        {
            Output = new StreamWriter(Console.OpenStandardOutput(), plain),
            Error = new StreamWriter(Console.OpenStandardError(), plain) { AutoFlush = true },
            OutputIsTerminal = !Console.IsOutputRedirected,
            ErrorIsTerminal = !Console.IsErrorRedirected,
            WithColour = string.IsNullOrEmpty(Environment.GetEnvironmentVariable("NO_COLOR"))
                && Environment.GetEnvironmentVariable("TERM") != "dumb",
            Environment = Settings(),
            Prover = new PlanProver(),
            Clock = TimeProvider.System,
        };
    }

    private static Dictionary<string, string> Settings() => Environment.GetEnvironmentVariables()
        .Cast<DictionaryEntry>()
        .Where(variable => ((string)variable.Key).StartsWith(SettingsTable.Prefix, StringComparison.Ordinal))
        .ToDictionary(variable => (string)variable.Key, variable => (string?)variable.Value ?? "");
}
