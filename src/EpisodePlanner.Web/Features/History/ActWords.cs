using EpisodePlanner.Data;

namespace EpisodePlanner.Web.Features.History;

/// <summary>How a change came about, in words before what it did.</summary>
public static class ActWords
{
    /// <summary>"Undo: " and the like; nothing for what somebody simply did.</summary>
    public static string Of(HistoryLine line) => line.Act switch
    {
        Act.Undo => "Undo: ",
        Act.Redo => "Made again: ",
        Act.Import => "From a file: ",
        Act.Restore => "Brought back: ",
        Act.Keep => "A supposed draft was kept: ",
        _ => "",
    };
}
