namespace EpisodePlanner.Web.Serving;

/// <summary>A kind of problem the server answers with (RFC 9457), explained under its own address.</summary>
/// <param name="Name">Its name, lower case with dashes; the last part of its address.</param>
/// <param name="Status">The HTTP status of every answer of this kind.</param>
/// <param name="Title">What it is, in a few words that never differ.</param>
/// <param name="Explanation">When it comes and what to do about it, for whoever writes a client.</param>
public sealed record ProblemType(string Name, int Status, string Title, string Explanation)
{
    /// <summary>What stands in <c>type</c>: the address of the explanation on this server.</summary>
    public string Address => $"{ProblemTypes.Folder}/{Name}";
}
