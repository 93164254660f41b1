using System.CommandLine;
using EpisodePlanner.Web.Composition;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>What the commands that use the database share.</summary>
internal static class Configured
{
    /// <summary>The option for the demo's own database.</summary>
    public static Option<bool> Demo(string meaning) => new("--demo") { Description = meaning };

    /// <summary>The settings, with their folder ready to be written to; null, with every reason on the error output.</summary>
    public static ServerSettings? Read(bool isDemo, Surroundings surroundings)
    {
        var read = SettingsReader.Read(surroundings.Environment, isDemo);
        foreach (var name in read.Unknown)
        {
            surroundings.Error.WriteLine($"{name} is no setting, and does nothing; \u201cserve --help\u201d lists those there are.");
        }

        if (read.Settings is not { } settings)
        {
            Complaints.About(read.Reasons, surroundings);
            return null;
        }

        if (DataFolder.Prepare(settings.DataFolder) is { } reason)
        {
            Complaints.About([reason], surroundings);
            return null;
        }

        return settings;
    }
}
