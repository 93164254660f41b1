namespace EpisodePlanner.Web.Serving;

/// <summary>A kind of problem (RFC 9457): its name under /problems/, its status and its title.</summary>
/// <param name="Name">The last part of its type: "stale".</param>
/// <param name="Status">The status code.</param>
/// <param name="Title">What it is, in words that are the same each time.</param>
internal sealed record Problem(string Name, int Status, string Title)
{
    public static Problem BadRequest { get; } = new("bad-request", 400, "The request can't be read");

    public static Problem NotFound { get; } = new("not-found", 404, "There is no such thing");

    public static Problem NotAcceptable { get; } = new("not-acceptable", 406, "It can't be given in any form that is asked for");

    public static Problem Exists { get; } = new("exists", 409, "There is one already");

    public static Problem KeptForEver { get; } = new("kept-for-ever", 409, "It is kept for ever as it is");

    public static Problem NothingToDo { get; } = new("nothing-to-do", 409, "There is nothing of the kind");

    public static Problem Stale { get; } = new("stale", 412, "Something else is there than was expected");

    public static Problem TooLarge { get; } = new("too-large", 413, "The body is too large");

    public static Problem NotJson { get; } = new("not-json", 415, "The body is not JSON in UTF-8");

    public static Problem BrokenRules { get; } = new("broken-rules", 422, "The rules of the workshop would be broken");

    public static Problem KeyReused { get; } = new("key-reused", 422, "The key was used for another request");

    public static Problem Unguarded { get; } = new("unguarded", 428, "The request does not say what it replaces");

    public static Problem StorageTrouble { get; } = new("storage-trouble", 503, "The database can't do its work now");
}
