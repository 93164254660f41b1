using EpisodePlanner.Web.Serving.ConditionalRequests;
using EpisodePlanner.Web.Serving.Requests;
using Microsoft.AspNetCore.Http.HttpResults;
using Microsoft.Net.Http.Headers;

namespace EpisodePlanner.Web.Serving.Answers;

/// <summary>Answers reads under their preconditions.</summary>
internal static class Reply
{
    /// <summary>What is there, unless the client has it already or expected something else.</summary>
    /// <param name="conditions">The preconditions of the request.</param>
    /// <param name="tag">The tag of what is there.</param>
    /// <param name="bytes">Makes the JSON, where it is needed.</param>
    /// <typeparam name="T">The record that the JSON is of.</typeparam>
    public static Results<Answer<T>, NotModified, Problem> To<T>(
        ReadConditions conditions, EntityTagHeaderValue tag, Func<ReadOnlyMemory<byte>> bytes) => conditions.Judge(tag) switch
        {
            Verdict.NotModified => new NotModified(tag),
            Verdict.Failed => Refusals.Stale(conditions.IfMatch, tag),
            _ => new Answer<T>(bytes(), tag),
        };
}
