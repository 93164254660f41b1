namespace EpisodePlanner.Checking;

/// <summary>How large a random problem is; a day has so many minutes.</summary>
internal sealed record ProblemSize(int Stages, int People, int Machines, int Places, int Day, int Days)
{
    public int Horizon => Day * Days;
}
