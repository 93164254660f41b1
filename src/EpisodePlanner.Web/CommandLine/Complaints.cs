using System.CommandLine;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>Says on the error output what is wrong.</summary>
internal static class Complaints
{
    /// <summary>What was typed is no command the planner knows.</summary>
    public static int AboutUse(ParseResult result, Surroundings surroundings)
    {
        foreach (var message in result.Errors.Select(error => error.Message).Distinct())
        {
            surroundings.Error.WriteLine(message);
        }

        var command = result.CommandResult.Command;
        var name = command is RootCommand ? "" : $"{command.Name} ";
        surroundings.Error.WriteLine($"\u201c{name}--help\u201d shows what can be asked, with an example.");
        return ExitCode.BadInput;
    }

    /// <summary>It was stopped from the keyboard; what the answer is worth then.</summary>
    public static int Stopped(string worth, Surroundings surroundings)
    {
        surroundings.Error.WriteLine($"Stopped: {worth}");
        return ExitCode.Stopped;
    }

    /// <summary>The database can't do its work.</summary>
    public static int About(StorageTroubleException trouble, Surroundings surroundings)
    {
        surroundings.Error.WriteLine(trouble.Message);
        return ExitCode.BadInput;
    }

    /// <summary>Something beside a file is wrong; each reason on a line of its own.</summary>
    public static int About(IEnumerable<Reason> reasons, Surroundings surroundings)
    {
        foreach (var reason in reasons)
        {
            surroundings.Error.WriteLine(reason);
        }

        return ExitCode.BadInput;
    }

    /// <summary>The planner met something it should have been ready for.</summary>
    public static int AboutOurselves(Exception exception, Surroundings surroundings)
    {
        surroundings.Error.WriteLine("The planner failed; this is its own fault, not the file's. Please report the lines below with the file.");
        surroundings.Error.WriteLine(exception);
        return ExitCode.Failed;
    }

    /// <summary>The file, or what it says, is wrong; each reason on a line of its own.</summary>
    public static int About(string file, IEnumerable<Reason> reasons, Surroundings surroundings)
    {
        foreach (var reason in reasons)
        {
            surroundings.Error.WriteLine(reason.Where.Length == 0 ? $"{file}: {reason.Says}" : $"{file}: {reason}");
        }

        return ExitCode.BadInput;
    }
}
