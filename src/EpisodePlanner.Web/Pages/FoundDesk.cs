using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using System.Reflection;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;

namespace EpisodePlanner.Web.Pages;

/// <summary>The workshop that the path of a page names; where there is none, the page that says so.</summary>
internal sealed class FoundDesk : IBindableFromHttpContext<FoundDesk>
{
    /// <summary>The query's part that tells that what was tapped could not be noted.</summary>
    public const string NotNotedQuery = "unnoted";

    private FoundDesk(Snapshot? now, IResult? missing, long? done) => (Now, Missing, Done) = (now, missing, done);

    /// <summary>The workshop; present wherever a handler is called.</summary>
    [NotNull]
    public Snapshot? Now => field ?? throw new InvalidOperationException("There is no such workshop.");

    /// <summary>What is shown in place of the page.</summary>
    public IResult? Missing { get; }

    /// <summary>The version of the change that was just made.</summary>
    public long? Done { get; }

    /// <summary>Where its pages are.</summary>
    public Paths Paths => new(Now.Id);

    /// <summary>Who changes it: at home, the maker.</summary>
    public string Who => Makers.Of(Now.Workshop);

    /// <inheritdoc/>
    public static async ValueTask<FoundDesk?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var name = context.GetRouteValue(DeskEndpoints.WorkshopParameter) as string;
        if (!Id.IsValid(name))
        {
            return new FoundDesk(null, MissingResult(null, null), null);
        }

        var store = context.RequestServices.GetRequiredService<WorkshopStore>();
        var lookup = await store.Find(new Id(name!), context.RequestAborted);
        return new FoundDesk(
            lookup.Found,
            lookup.Found is null ? MissingResult(name, lookup.DeletedAt) : null,
            long.TryParse(context.Request.Query[Desk.DoneQuery], NumberStyles.None, CultureInfo.InvariantCulture, out var done) ? done : null);
    }

    private static RazorComponentResult<MissingPage> MissingResult(string? workshop, NodaTime.Instant? deletedAt) =>
        Shown.As<MissingPage>(
            deletedAt is null ? StatusCodes.Status404NotFound : StatusCodes.Status410Gone,
            (nameof(MissingPage.Workshop), workshop),
            (nameof(MissingPage.DeletedAt), deletedAt));
}

/// <summary>Shows nothing of a page whose workshop there isn't, but the page that says so.</summary>
internal sealed class ShowMissing : IEndpointFilter
{
    /// <inheritdoc/>
    public ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next)
    {
        var missing = context.Arguments.OfType<FoundDesk>().Select(desk => desk.Missing).FirstOrDefault(page => page is not null);
        return missing is null ? next(context) : ValueTask.FromResult<object?>(missing);
    }
}

/// <summary>Makes pages out of components.</summary>
internal static class Shown
{
    /// <summary>A page.</summary>
    public static RazorComponentResult<T> As<T>(params (string Name, object? Value)[] parameters)
        where T : Microsoft.AspNetCore.Components.IComponent => As<T>(StatusCodes.Status200OK, parameters);

    /// <summary>A page with a status of its own.</summary>
    public static RazorComponentResult<T> As<T>(int status, params (string Name, object? Value)[] parameters)
        where T : Microsoft.AspNetCore.Components.IComponent =>
        new(parameters.ToDictionary(parameter => parameter.Name, parameter => parameter.Value)) { StatusCode = status };
}
