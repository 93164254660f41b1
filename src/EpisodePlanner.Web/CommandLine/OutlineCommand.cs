using System.CommandLine;
using EpisodePlanner.Planning;
using EpisodePlanner.Writing;

namespace EpisodePlanner.Web.CommandLine;

/// <summary>"outline": the notes for an episode.</summary>
internal static class OutlineCommand
{
    public static Command Create(Surroundings surroundings)
    {
        var file = CommonParts.File();
        var now = Moments.Option();
        var episode = CommonParts.Episode();
        var command = new Command(
            "outline",
            "Writes the notes for an episode as Markdown, from plan and log.\n\n"
            + "Example: outline demo-seed/harbour-shed.json --episode ferry-e8")
        {
            file,
            episode,
            now,
        };
        command.SetAction((result, stop) => Task.FromResult(WritingCommand.Run(
            result.GetValue(file)!, result.GetValue(now), plan => Write(plan, result.GetValue(episode)!), surroundings, stop)));
        return command;
    }

    private static WriteResult Write(Plan plan, string episode) => Id.IsValid(episode)
        ? Outline.Write(plan, new Id(episode))
        : new NotWritten([new Reason(
            "--episode",
            $"'{episode}' can't be an id; ids are 1 to {Id.MaximumLength} letters, digits, dots, dashes and underscores.")]);
}
