using Microsoft.AspNetCore.DataProtection;

namespace EpisodePlanner.Web.Composition;

/// <summary>The tokens that forms carry, and the keys that sign them.</summary>
internal static class FormTokens
{
    /// <summary>Keys are kept with the data, so that a form opened before a restart can be sent after it.</summary>
    public static IServiceCollection AddFormTokens(this IServiceCollection services, ServerSettings settings)
    {
        services.AddDataProtection()
            .SetApplicationName("episode-planner")
            .PersistKeysToFileSystem(new DirectoryInfo(Path.Combine(settings.DataFolder, "keys")));
        return services.AddAntiforgery(forms =>
        {
            forms.Cookie.Name = "episode-planner-form";
            forms.Cookie.SameSite = SameSiteMode.Strict;
            forms.Cookie.HttpOnly = true;
            forms.FormFieldName = "_token";
            forms.HeaderName = null;
        });
    }
}
