using System.CommandLine;
using EpisodePlanner.Writing;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"letter": the update to supporters.</summary>
internal static class LetterCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var now = Moments.Option();
        var command = new Command(
            "letter",
            "Writes the update to supporters as Markdown, from plan and log: what happened, what comes next.\n\n"
            + "Example: letter demo-seed/harbour-shed.json")
        {
            file,
            now,
        };
        command.SetAction((result, stop) => Task.FromResult(
            WritingCommand.Run(result.GetValue(file)!, result.GetValue(now), plan => Letter.Write(plan), surroundings, stop)));
        return command;
    }
}
