using System.CommandLine;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"--format": for people or for programs.</summary>
internal static class Formats
{
    private const string AsText = "text";
    private const string AsJson = "json";

    /// <summary>The option; text where it is not given.</summary>
    public static Option<string> Option() => new("--format")
    {
        HelpName = $"{AsText}|{AsJson}",
        Description = "text for people, json for programs",
        DefaultValueFactory = _ => AsText,
        CustomParser = argument =>
        {
            var typed = argument.Tokens[0].Value;
            if (typed is not (AsText or AsJson))
            {
                argument.AddError($"--format: '{typed}' is unknown; write {AsText} or {AsJson}.");
            }

            return typed;
        },
    };

    /// <summary>Whether programs are meant.</summary>
    public static bool IsJson(string? value) => value == AsJson;
}
