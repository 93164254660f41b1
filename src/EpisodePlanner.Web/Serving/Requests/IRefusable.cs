namespace EpisodePlanner.Web.Serving.Requests;

/// <summary>An argument of a handler that is read from the request, and may be why the handler is not called at all.</summary>
internal interface IRefusable
{
    /// <summary>The answer in place of the handler's; null where the argument is sound.</summary>
    IResult? Refusal { get; }
}

/// <summary>Answers for the handler where one of its arguments could not be read; the first one decides.</summary>
internal sealed class RefuseArguments : IEndpointFilter
{
    /// <inheritdoc/>
    public async ValueTask<object?> InvokeAsync(EndpointFilterInvocationContext context, EndpointFilterDelegate next) =>
        context.Arguments.OfType<IRefusable>().Select(argument => argument.Refusal).FirstOrDefault(refusal => refusal is not null)
        ?? await next(context);
}
