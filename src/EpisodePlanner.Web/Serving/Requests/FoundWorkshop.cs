using System.Diagnostics.CodeAnalysis;
using System.Reflection;
using EpisodePlanner.Data;
using EpisodePlanner.Planning;
using EpisodePlanner.Web.Serving.Answers;
using Microsoft.AspNetCore.Http.Metadata;

namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>The workshop that the path names, as it is now.</summary>
internal sealed class FoundWorkshop : IRefusable, IBindableFromHttpContext<FoundWorkshop>, IEndpointParameterMetadataProvider
{
    /// <summary>The parameter of the path.</summary>
    public const string Parameter = "workshop";

    private FoundWorkshop(Snapshot? now, IResult? refusal) => (Now, Refusal) = (now, refusal);

    /// <summary>The workshop; present wherever a handler is called.</summary>
    [NotNull]
    public Snapshot? Now => field ?? throw new InvalidOperationException("There is no such workshop.");

    /// <summary>Its id.</summary>
    public Id Id => Now.Id;

    /// <summary>Who changes it: at home, the maker.</summary>
    public string Who => Makers.Of(Now.Workshop);

    /// <inheritdoc/>
    public IResult? Refusal { get; }

    /// <inheritdoc/>
    public static async ValueTask<FoundWorkshop?> BindAsync(HttpContext context, ParameterInfo parameter)
    {
        var name = context.GetRouteValue(Parameter) as string;
        if (!Id.IsValid(name))
        {
            return new FoundWorkshop(null, Refusals.NoWorkshop(name, null));
        }

        var store = context.RequestServices.GetRequiredService<WorkshopStore>();
        var lookup = await store.Find(new Id(name!), context.RequestAborted);
        return new FoundWorkshop(lookup.Found, lookup.Found is null ? Refusals.NoWorkshop(name, lookup.DeletedAt) : null);
    }

    /// <inheritdoc/>
    public static void PopulateMetadata(ParameterInfo parameter, EndpointBuilder builder) =>
        builder.Metadata.Add(new Refuses(ProblemTypes.NotFound, ProblemTypes.Gone, ProblemTypes.StorageUnavailable));
}

/// <summary>Whose name a change carries.</summary>
internal static class Makers
{
    /// <summary>The maker where nobody gave a name.</summary>
    public const string Unknown = "the maker";

    /// <summary>The maker of a workshop, by its settings.</summary>
    public static string Of(Workshop workshop) => workshop.Settings.Maker ?? Unknown;
}
