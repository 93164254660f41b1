namespace EpisodePlanner.Scheduling.Packed;

/// <summary>What is free over time. A struct, so that each decoder is compiled for its own kind of profile.</summary>
internal interface IProfile
{
    /// <summary>Gives everything back.</summary>
    void Clear();

    /// <summary>The earliest start from a moment on with room for the whole of an activity that needs room.</summary>
    int EarliestFit(int activity, int from);

    /// <summary>Takes what an activity takes.</summary>
    void Take(int activity, int start);
}
