namespace EpisodePlanner.Web.Serving;

/// <summary>Refuses addresses longer than any that is here, before anything looks at them.</summary>
internal sealed class AddressGuard(RequestDelegate next)
{
    /// <summary>The longest address, in characters as they are written, its query included.</summary>
    public const int Longest = 4_096;

    public Task Invoke(HttpContext context)
    {
        var request = context.Request;
        return (request.Path.ToUriComponent().Length + request.QueryString.ToUriComponent().Length) > Longest
            ? Problems.Of(ProblemTypes.AddressTooLong).ExecuteAsync(context)
            : next(context);
    }
}
